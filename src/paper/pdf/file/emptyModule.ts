// Replaces libraries that jspdf would import and that the paper layer never uses.
export default {};
