// Stands where jspdf would import drawing libraries that the paper layer never calls.
export default {};
